/** The extension rings of the reader's kit, for pickers that offer the crate's; empty where none is kept. */
class OwnRings {
  /** Lengths, mm, in the kit's order. */
  lengths: readonly number[] = $state.raw([]);
}

export const ownRings = new OwnRings();
