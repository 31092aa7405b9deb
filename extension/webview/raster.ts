/** Turns a finished picture into PNG bytes. */
export async function rasterise(svg: string, scale: number): Promise<Uint8Array> {
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(svg)}`;
  await image.decode();
  const canvas = document.createElement('canvas');
  canvas.width = Math.ceil(image.naturalWidth * scale);
  canvas.height = Math.ceil(image.naturalHeight * scale);
  const brush = canvas.getContext('2d');
  if (brush === null) throw new Error('This window cannot draw.');
  brush.drawImage(image, 0, 0, canvas.width, canvas.height);
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
  if (blob === null) throw new Error(`A picture of ${canvas.width} × ${canvas.height} points is too large.`);
  return new Uint8Array(await blob.arrayBuffer());
}
