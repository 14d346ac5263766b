/** Bytes of one record in the list of a font's tables, and of what stands before the list. */
const [record, head] = [16, 12];

/** Family, style, whole name and the name by which a document asks for it: what some systems do not load a font without. */
const kept = [1, 2, 4, 6];

/** A table of names that are all *name*, of plain letters. */
function tableOfNames(name: string): Buffer {
  const [start, each] = [6, 12];
  const strings = start + each * kept.length;
  const table = Buffer.alloc(strings + 2 * name.length);
  table.writeUInt16BE(kept.length, 2);
  table.writeUInt16BE(strings, 4);
  // For Windows, in Unicode, in English; all of what is stored.
  for (const [index, id] of kept.entries())
    for (const [place, value] of [3, 1, 0x409, id, 2 * name.length, 0].entries())
      table.writeUInt16BE(value, start + each * index + 2 * place);
  Buffer.from(name, 'utf16le').swap16().copy(table, strings);
  return table;
}

/**
 * A font (TrueType) called *name* and no more, without those of its makers and weights: a page says in its styles which font is which, and a part of a
 * font may not be called what the whole is. Notices and licence are in `site/public/font-licences.txt`.
 */
export function withPlainNames(font: Buffer, name: string): Buffer {
  const names = tableOfNames(name);
  const count = font.readUInt16BE(4);
  const list = Buffer.from(font.subarray(0, head + record * count));
  const tables: Buffer[] = [];
  let offset = list.length;
  for (let at = head; at < list.length; at += record) {
    const start = list.readUInt32BE(at + 8);
    const tag = list.toString('latin1', at, at + 4);
    const table = tag === 'name' ? names : font.subarray(start, start + list.readUInt32BE(at + 12));
    // Sums of what a table holds are made anew where it is packed.
    list.writeUInt32BE(offset, at + 8);
    list.writeUInt32BE(table.length, at + 12);
    const padded = Buffer.alloc(Math.ceil(table.length / 4) * 4);
    table.copy(padded);
    tables.push(padded);
    offset += padded.length;
  }
  return Buffer.concat([list, ...tables]);
}
