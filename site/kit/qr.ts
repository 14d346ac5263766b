import { generate } from 'lean-qr/nano';
import { toSvgPath } from 'lean-qr/extras/svg';

/** A QR code as a drawing: so many squares to a side, without the margin of four around it, and the dark ones as one path. */
export interface QrCode {
  readonly size: number;
  readonly path: string;
}

/** The QR code of an address; undefined where it is too long for the largest code there is, of 177 squares to a side and not quite 3000 letters. */
export function qrCode(address: string): QrCode | undefined {
  let code: ReturnType<typeof generate>;
  try {
    code = generate(address);
  } catch {
    return undefined;
  }
  return { size: code.size, path: toSvgPath(code) };
}
