import { mount } from 'svelte';

/** Draws the QR code of an address on paper; nothing where the address is too long. */
export type CodeOf = (address: string) => HTMLElement | undefined;

/** Fetches what draws codes. Throws where the network does not give it. */
export async function codeOf(): Promise<CodeOf> {
  const [{ qrCode }, { default: QrDrawing }] = await Promise.all([
    import('#site/kit/qr.ts'),
    import('#site/controls/qr/QrDrawing.svelte'),
  ]);
  return (address) => {
    const code = qrCode(address);
    if (!code) return undefined;
    const target = document.createElement('div');
    mount(QrDrawing, { target, props: { code, label: 'QR code of this address' } });
    return target;
  };
}
