/** Something the reader gave that could not be used: which field, and in words what was wrong, kept and accepted. */
export interface Notice {
  readonly field: string;
  readonly text: string;
}
