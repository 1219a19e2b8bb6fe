import { join } from 'node:path'
import { workshopName } from '../../publish/brand/workshop.ts'
import { browserSetting } from '../../publish/browser.ts'
import type { Action } from '../commands.ts'
import type { Outside } from '../outside.ts'
import { exitCodes } from '../problems.ts'

/** `desk [FOLDER]`: a page on this computer, until Ctrl-C. What is being saved then is saved first. */
export const desk: Action = async ([folder = '.'], { port, open }, outside) => {
  const [{ openDesk }, { deskPage }, { default: about }] = await Promise.all([
    import('../../desk/server/serve.ts'),
    import('../../desk/server/page.ts'),
    import('../../../package.json', { with: { type: 'json' } }),
  ])
  // A build that is not there is told here, and not by an empty page.
  const page = () => deskPage(outside)
  await page()
  const browserPath = outside.env[browserSetting]
  const opened = await openDesk({
    folder,
    page,
    version: about.version,
    ...(port !== undefined && { port }),
    ...(browserPath && { browserPath }),
    tell: outside.stderr,
  })
  outside.stdout(
    `The desk is open, with the lessons in \`${folder}\`:\n\n  ${opened.address}\n\nOpen this address in your browser. It works on this computer only, until you press Ctrl-C here.\n`,
  )
  if (await isAbove(folder, outside))
    outside.stderr(
      `The \`${workshopName}\` above \`${folder}\` is not read here, since the desk stays in its folder: copy it there, or open the desk on the folder that it is in\n`,
    )
  if (open && !(await outside.openAddress(opened.address)))
    outside.stderr('No browser could be opened from here: copy the address into yours\n')
  await outside.stopped()
  await opened.close()
  outside.stdout('The desk is closed\n')
  return exitCodes.done
}

/** Whether a `workshop.yaml` lies above the folder, where a command would read it, and none in the folder. */
async function isAbove(folder: string, { read }: Pick<Outside, 'read'>): Promise<boolean> {
  const isThere = (path: string): Promise<boolean> =>
    read(path).then(
      () => true,
      () => false,
    )
  return !(await isThere(join(folder, workshopName))) && isThere(join(folder, '..', workshopName))
}
