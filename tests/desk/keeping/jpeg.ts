/** What is written in a JPEG file, read by its own rules (ITU-T T.81, annex B). */
export interface JpegTold {
  readonly width: number
  readonly height: number
  /** Markers of its segments, in order. */
  readonly markers: readonly number[]
}

export function readJpeg(bytes: Uint8Array): JpegTold {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const markers: number[] = []
  let [width, height] = [0, 0]
  for (let at = 2; at < bytes.length; at += 2 + view.getUint16(at + 2)) {
    const marker = view.getUint16(at)
    markers.push(marker)
    // SOF0 and SOF2: height and width stand behind the precision.
    if (marker === 0xffc0 || marker === 0xffc2)
      [height, width] = [view.getUint16(at + 5), view.getUint16(at + 7)]
    if (marker === 0xffda) break
  }
  return { width, height, markers }
}

/** An APP1 segment as a camera writes it: the orientation, and a place (Exif 2.3, 4.6). */
export function exifSegment(orientation: number): Uint8Array {
  const place = 'GPS 54.1N 0.2W Quillhaven'
  const tiff = Buffer.alloc(8 + 2 + 12 * 2 + 4 + place.length)
  tiff.write('MM', 0, 'latin1')
  tiff.writeUInt16BE(42, 2)
  tiff.writeUInt32BE(8, 4)
  tiff.writeUInt16BE(2, 8)
  // Orientation, one short.
  tiff.writeUInt16BE(0x0112, 10)
  tiff.writeUInt16BE(3, 12)
  tiff.writeUInt32BE(1, 14)
  tiff.writeUInt16BE(orientation, 18)
  // ImageDescription, text behind the directory.
  tiff.writeUInt16BE(0x010e, 22)
  tiff.writeUInt16BE(2, 24)
  tiff.writeUInt32BE(place.length, 26)
  tiff.writeUInt32BE(38, 30)
  tiff.write(place, 38, 'latin1')
  const body = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff])
  const head = Buffer.alloc(4)
  head.writeUInt16BE(0xffe1, 0)
  head.writeUInt16BE(body.length + 2, 2)
  return Buffer.concat([head, body])
}
