import { point } from '../../draw/ink.ts'
import { textWidth } from '../../draw/label.ts'
import type { Finding, Place } from '../../length/finding.ts'
import type { BrandWish, Told } from '../../lesson/brand/brand.ts'
import { type Colour, readableOn } from '../../lesson/brand/colour.ts'
import type { PictureTrouble } from '../picture-troubles.ts'
import type { OnGrounds, PageBrand } from './page-brand.ts'
import type { WorkshopFile } from './workshop.ts'

/** A logo comes with every page that stands alone: more than this, in bytes, is no small mark. */
export const heaviestLogo = 1_000_000
/** Room in mm for a line in the middle of a page's foot, in the type of the foot, in points. */
const [footRoom, footType] = [90, 8]
/** The ground of a dark screen, as the theme has it. */
export const darkGround: Colour = '#14212a'

/** Where a logo lies. */
export interface LogoFrom {
  /** The folder of the file that names it; none where that is the lesson. */
  readonly workshop?: string
  /** What that folder is called in messages. */
  readonly folderName: string
}

/**
 * Reads a logo: its data, what is wrong with it, or undefined where it is not known yet.
 *
 * @param url its address as written, from the folder of the file that names it.
 */
export type ReadLogo = (url: string, from: LogoFrom) => Promise<string | PictureTrouble | undefined>

/** A file that says what is on the prints, and how a place in it is told. */
interface From extends LogoFrom {
  readonly wish: BrandWish
  readonly at: (finding: Finding, place?: Place) => Finding
}

/**
 * The brand of a page: what the lesson says itself, and for the rest the file that speaks for its folder.
 *
 * @param own of the lesson; none where a print is about several.
 * @returns a finding for everything that is wrong, in the lesson; the print goes without that.
 */
export async function brandOf(
  own: BrandWish | undefined,
  workshop: WorkshopFile | undefined,
  readLogo: ReadLogo,
): Promise<{ brand?: PageBrand; findings: Finding[] }> {
  const inWorkshop = (
    finding: Finding,
    { line, column }: Place = finding.place ?? { line: 1, column: 1 },
  ) => ({
    ...finding,
    message: `In \`${workshop?.path}\`, line ${line}, column ${column}: ${finding.message}`,
    place: { line: 1, column: 1 },
  })
  const files: From[] = [
    {
      wish: own ?? {},
      folderName: 'the lesson’s folder',
      at: (finding, place = { line: 1, column: 1 }) => ({ ...finding, place }),
    },
    ...(workshop
      ? [
          {
            wish: workshop.wish,
            workshop: workshop.folder,
            folderName: `the folder of \`${workshop.path}\``,
            at: inWorkshop,
          },
        ]
      : []),
  ]
  const findings = (workshop?.findings ?? []).map((finding) => inWorkshop(finding))
  const brand: PageBrand = {
    ...(await logoIn(files, readLogo, findings)),
    ...colourIn(files, 'accent'),
    ...colourIn(files, 'second'),
    ...footerIn(files, findings),
  }
  return { ...(Object.keys(brand).length > 0 && { brand }), findings }
}

/** What the first of the files says that says it at all. */
function first<K extends keyof BrandWish>(
  files: readonly From[],
  key: K,
): { told: NonNullable<BrandWish[K]>; from: From } | undefined {
  const from = files.find(({ wish }) => wish[key] !== undefined)
  const told = from?.wish[key]
  return from && told ? { told, from } : undefined
}

async function logoIn(
  files: readonly From[],
  readLogo: ReadLogo,
  findings: Finding[],
): Promise<Pick<PageBrand, 'logo'>> {
  const logo = first(files, 'logo')
  if (!logo) return {}
  const { told, from } = logo
  const read = await readLogo(told.value, from)
  if (read === undefined) return {}
  if (typeof read !== 'string') {
    findings.push(from.at({ severity: 'warning', ...read }, told.place))
    return {}
  }
  const name = first(files, 'name')?.told.value
  if (name === undefined)
    findings.push(
      from.at(
        {
          rule: 'brand-unnamed',
          severity: 'warning',
          message: 'The logo says nothing to those who do not see it',
          suggestion: 'Write what your workshop is called, such as `name: Quillhaven paper table`',
        },
        told.place,
      ),
    )
  return { logo: { data: read, alternative: name ?? '' } }
}

function colourIn<K extends 'accent' | 'second'>(
  files: readonly From[],
  key: K,
): Partial<Record<K, OnGrounds>> {
  const colour: Told<Colour> | undefined = first(files, key)?.told
  if (!colour) return {}
  const grounds: OnGrounds = { onPaper: colour.value, onDark: readableOn(colour.value, darkGround) }
  return { [key]: grounds } as Partial<Record<K, OnGrounds>>
}

function footerIn(files: readonly From[], findings: Finding[]): Pick<PageBrand, 'footer'> {
  const footer = first(files, 'footer')
  if (!footer) return {}
  const { told, from } = footer
  const width = textWidth(told.value, footType * point)
  if (width <= footRoom) return { footer: told.value }
  findings.push(
    from.at(
      {
        rule: 'long-footer',
        severity: 'warning',
        message: `The footer is ${Math.ceil(width)} mm long, and the foot of a page has room for ${footRoom} mm, so it is left out`,
        suggestion: `Write it with ${Math.floor((told.value.length * footRoom) / width)} letters or fewer`,
      },
      told.place,
    ),
  )
  return {}
}
