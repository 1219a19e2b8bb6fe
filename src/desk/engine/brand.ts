import type { Finding } from '../../length/finding.ts'
import type { BrandWish } from '../../lesson/brand/brand.ts'
import { brandOf, heaviestLogo } from '../../publish/brand/brand-of.ts'
import type { PageBrand } from '../../publish/brand/page-brand.ts'
import { unreadWorkshop, type WorkshopFile, workshopIn } from '../../publish/brand/workshop.ts'
import { heavyPicture, type PictureTrouble } from '../../publish/picture-troubles.ts'
import type { Beside, WorkshopData } from './engine.ts'
import { pictureTrouble } from './pictures.ts'

/** What a workshop puts on a page, of what the page of the desk has read beside the lesson. */
export async function brandBeside(
  own: BrandWish | undefined,
  { pictures, workshop }: Beside,
): Promise<{ readonly brand?: PageBrand; readonly findings: readonly Finding[] }> {
  return brandOf(own, workshop && fileOf(workshop), async (url, { workshop: isOfWorkshop, folderName }) => {
    const data = isOfWorkshop === undefined ? pictures[url] : workshop?.logo
    return pictureTrouble(url, data, folderName) ?? tooHeavy(url, data) ?? data
  })
}

/** The address of the logo that a `workshop.yaml` names, if it names one. */
export const logoIn = (text: string): string | undefined => workshopIn(text).wish.logo?.value

const fileOf = ({ path, text }: WorkshopData): WorkshopFile => ({
  path,
  folder: path.slice(0, Math.max(0, path.lastIndexOf('/'))),
  ...(text === undefined
    ? unreadWorkshop('This file cannot be read', 'Look whether it is UTF-8 text that you may read')
    : workshopIn(text)),
})

function tooHeavy(url: string, data = ''): PictureTrouble | undefined {
  const bytes = Math.floor(((data.length - data.indexOf(',') - 1) * 3) / 4)
  return bytes > heaviestLogo ? heavyPicture(url, bytes, heaviestLogo) : undefined
}
