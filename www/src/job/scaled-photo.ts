// Photos as they are kept: no larger than can be read, so that a job with many of them still fits on a phone.

const longestSide = 1600;
const quality = 0.8;

/** The picture as JPEG; throws if it is none. */
export async function scaledPhoto(file: Blob): Promise<Blob> {
  const picture = await createImageBitmap(file);
  try {
    const factor = Math.min(1, longestSide / Math.max(picture.width, picture.height));
    const canvas = document.createElement("canvas");
    canvas.width = Math.max(1, Math.round(picture.width * factor));
    canvas.height = Math.max(1, Math.round(picture.height * factor));
    const context = canvas.getContext("2d");
    if (context === null) throw new Error("no canvas");
    // JPEG has no transparency: what shows through would be black.
    context.fillStyle = "#fff";
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.drawImage(picture, 0, 0, canvas.width, canvas.height);
    return await new Promise((done, failed) => {
      canvas.toBlob((photo) => (photo === null ? failed(new Error("no JPEG")) : done(photo)), "image/jpeg", quality);
    });
  } finally {
    picture.close();
  }
}
