import type { Finding } from '../../length/finding.ts'
import type { BrandWish } from '../../lesson/brand/brand.ts'
import type { Outside } from '../outside.ts'
import { readPicture } from '../pictures.ts'
import { brandOf, heaviestLogo } from './brand-of.ts'
import type { PageBrand } from './page-brand.ts'
import { readWorkshop } from './workshop-file.ts'

/**
 * The brand of a page: what the lesson says itself, and for the rest the `workshop.yaml` of its folder or of the one above.
 *
 * @param own of the lesson; none where a print is about several.
 * @param folder the lesson's own folder.
 * @returns a finding for everything that is wrong, in the lesson; the print goes without that.
 */
export async function readBrand(
  own: BrandWish | undefined,
  folder: string,
  outside: Pick<Outside, 'read'>,
): Promise<{ brand?: PageBrand; findings: Finding[] }> {
  const found = await readWorkshop(folder, outside)
  return brandOf(own, found, (url, { workshop = folder, folderName }) =>
    readPicture(url, workshop, outside, { most: heaviestLogo, folderName }),
  )
}
