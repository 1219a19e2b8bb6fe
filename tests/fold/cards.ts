import { inches, type Length, larger, minus, mm, part, plus, times, zero } from '../../src/length/length.ts'
import { card, point, sheet, strip, stuck } from './build.ts'

/** left tab M left leg V floor V right leg M right tab, with strips from tab to tab. All in mm. */
export function bridge({
  leg = 20,
  tab = 20,
  floor = 120,
  high = 100,
  degrees = 90,
  strips = 1,
  caliper = 0,
  raise = 0,
}) {
  const [l, t, f, h] = [mm(leg), mm(tab), mm(floor), mm(high)]
  const base = strip({
    panels: [
      ['left tab', t],
      ['left leg', l],
      ['floor', f],
      ['right leg', l],
      ['right tab', t],
    ],
    folds: 'MVVM',
    across: h,
    caliper: mm(caliper),
  })
  const names = Array.from({ length: strips }, (_, i) => `strip ${i + 1}`)
  const height = part(h, Math.max(1, strips))
  return card({
    parts: [base, ...names.map((name) => sheet(name, plus(f, t, t), height, mm(caliper)))],
    bonds: names.flatMap((name, i) => [
      stuck(name, 'left tab', zero, times(height, i), { height: mm(raise) }),
      stuck(name, 'right tab', times(l, 2), times(height, i), { height: mm(raise) }),
    ]),
    plate: 'floor',
    angles: [['left leg', 'floor', degrees]],
  })
}

/** What a bridge closes to, from the four-bar it is: F + leg + max(tab, 2·tab - leg). */
export const bridgeWidth = (floor: Length, leg: Length, tab: Length): Length =>
  plus(floor, leg, larger(tab, minus(times(tab, 2), leg)))

/** Upwards: base H, V, prop H/2, M, foot H/2; the front hangs on the foot and its lower edge rests on the base. */
export function easel(high: Length, stop: Length, caliper = zero) {
  const half = part(high, 2)
  const wide = inches(5)
  const base = strip({
    panels: [
      ['base', high],
      ['prop', half],
      ['foot', half],
    ],
    folds: 'VM',
    across: wide,
    along: 'height',
    caliper,
  })
  const level = (y: Length) => ({ from: point(zero, y), to: point(wide, y) })
  return card({
    parts: [base, sheet('front', wide, high, caliper)],
    bonds: [stuck('front', 'foot', zero, high)],
    stops: [{ plate: 'front', edge: level(zero), onto: 'base', line: level(minus(high, stop)) }],
    plate: 'base',
    rests: 'flat',
  })
}

/**
 * Two pages and a strip that stands up between them when they open: `a` and `d` from the gutter to where it is stuck,
 * `b` and `c` from there to its ridge. The pages stand open by `degrees`.
 */
export function popUp({ a = 30, b = 50, c = 30, d = 50, page = 100, degrees = 90 }) {
  const tab = 10
  const pages = strip({
    panels: [
      ['page 2', mm(page)],
      ['page 1', mm(page)],
    ],
    folds: 'V',
    across: mm(60),
  })
  const tent = strip({
    piece: 'tent',
    panels: [
      ['tab 2', mm(tab)],
      ['c', mm(c)],
      ['b', mm(b)],
      ['tab 1', mm(tab)],
    ],
    folds: 'VMV',
    across: mm(20),
  })
  const up = mm(20)
  return card({
    parts: [pages, tent],
    bonds: [
      stuck('tab 1', 'page 1', minus(mm(page), mm(tab), mm(b), mm(c), mm(-a)), up),
      stuck('tab 2', 'page 2', minus(mm(page), mm(tab), mm(d)), up),
    ],
    plate: 'page 1',
    angles: [['page 2', 'page 1', 180 - degrees]],
  })
}
