import { browserSetting } from '../../publish/browser.ts'
import type { Action } from '../commands.ts'
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
  if (open && !(await outside.openAddress(opened.address)))
    outside.stderr('No browser could be opened from here: copy the address into yours\n')
  await outside.stopped()
  await opened.close()
  outside.stdout('The desk is closed\n')
  return exitCodes.done
}
