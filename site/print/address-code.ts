/** A QR code of an address, for paper: black on white with the margin that readers of it want, or nothing where the address is too long. */
export type CodeOf = (address: string) => SVGSVGElement | undefined;

/** Empty squares around the code. ISO/IEC 18004:2015, 5.3.8 (from memory). */
const margin = 4;

/** Fetches what draws codes. Throws where the network does not give it. */
export async function codeOf(): Promise<CodeOf> {
  const { qrCode } = await import('#site/kit/qr.ts');
  return (address) => {
    const code = qrCode(address);
    if (!code) return undefined;
    const element = <Name extends 'svg' | 'path'>(name: Name, attributes: Record<string, string>) => {
      const made = document.createElementNS('http://www.w3.org/2000/svg', name);
      for (const [attribute, value] of Object.entries(attributes)) made.setAttribute(attribute, value);
      return made;
    };
    const side = code.size + 2 * margin;
    const svg = element('svg', {
      role: 'img',
      'aria-label': 'QR code of this address',
      viewBox: `${-margin} ${-margin} ${side} ${side}`,
      width: '26mm',
    });
    svg.append(element('path', { d: code.path, fill: '#000' }));
    return svg;
  };
}
