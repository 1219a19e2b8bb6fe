import { spawnSync } from 'node:child_process'
import process from 'node:process'

/** What happened on a disk of its own. */
export interface OnDisk {
  readonly code: number
  readonly said: string
  /** What lies there in the end: names and sizes in bytes, hidden files too. */
  readonly left: Readonly<Record<string, number>>
}

const place = '/mnt'
// Root may mount in a space of its own; anybody else where the system lets users have one.
const unshare = process.getuid?.() === 0 ? ['-m'] : ['-rm']

/** Why there can be no disk of our own; undefined when there can. */
export const noDisk: string | undefined =
  spawnSync('unshare', [...unshare, 'mount', '-t', 'tmpfs', '-o', 'size=64k', 'none', place]).status === 0
    ? undefined
    : 'This system lets nobody mount a disk of his own'

/**
 * Runs a command on a small disk, which nobody else sees, and which is gone afterwards.
 *
 * @param options `size` such as `100k`; `before` is a line for the shell that is run there first, with `$0` for its place.
 * @param argv where it says `DISK`, the place of the disk is put.
 */
export function onDisk(
  options: { size: string; before?: string; readOnly?: boolean },
  program: string,
  argv: readonly string[],
): OnDisk {
  const script = [
    `mount -t tmpfs -o size=${options.size} none ${place}`,
    options.before?.replaceAll('DISK', place) ?? ':',
    options.readOnly ? `mount -o remount,ro ${place}` : ':',
    '"$@"',
    'code=$?',
    `echo "== $code"`,
    `find ${place} -type f -printf '%P\\t%s\\n'`,
  ].join('\n')
  const line = argv.map((word) => word.replace('DISK', place))
  const { stdout, stderr } = spawnSync(
    'unshare',
    [...unshare, 'sh', '-c', script, 'sh', process.execPath, program, ...line],
    {
      encoding: 'utf8',
    },
  )
  const [out = '', rest = ''] = stdout.split('== ')
  const [code = '', ...files] = rest.trim().split('\n')
  return {
    code: Number(code),
    said: (out + stderr).replaceAll(place, 'DISK'),
    left: Object.fromEntries(
      files.map((one) => {
        const [name = '', size] = one.split('\t')
        return [name, Number(size)]
      }),
    ),
  }
}
