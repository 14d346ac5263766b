import type { PaperSize } from './paper.ts';

/** A picture as it stands on the screen, with its rule and its words, made as large as *size* allows; undefined while there is none. */
export function pictureOnPaper(shown: ParentNode, { box }: PaperSize): HTMLElement | undefined {
  const picture = shown.querySelector<HTMLElement>('.picture');
  const canvas = picture?.querySelector<HTMLCanvasElement>('canvas:not([hidden])');
  if (!picture || !canvas) return undefined;
  const { clientWidth: width, clientHeight: height } = picture;
  const copy = picture.cloneNode(true) as HTMLElement;
  const image = new Image();
  image.src = canvas.toDataURL();
  image.style.cssText = canvas.style.cssText;
  copy.querySelector('canvas:not([hidden])')!.replaceWith(image);
  copy.style.cssText = `flex:none;inline-size:${width}px;block-size:${height}px;zoom:${Math.min(box.width / width, box.height / height)}`;
  return copy;
}
