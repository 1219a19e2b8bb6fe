import { accordion } from './folds/accordion.ts'
import { bellyBand } from './folds/belly-band.ts'
import { boxCard } from './folds/box-card.ts'
import { boxStep } from './folds/box-step.ts'
import { bridge } from './folds/bridge.ts'
import { centreStep } from './folds/centre-step.ts'
import { doubleGate } from './folds/double-gate.ts'
import { easel } from './folds/easel.ts'
import { endless } from './folds/endless.ts'
import { explodingBox } from './folds/exploding-box.ts'
import { floatingLayer } from './folds/floating-layer.ts'
import { gate } from './folds/gate.ts'
import { joy } from './folds/joy.ts'
import { letter } from './folds/letter.ts'
import { matchBox } from './folds/match-box.ts'
import { pocket } from './folds/pocket.ts'
import { shadowBox } from './folds/shadow-box.ts'
import { shutter } from './folds/shutter.ts'
import { side } from './folds/side.ts'
import { sideStep } from './folds/side-step.ts'
import { slider } from './folds/slider.ts'
import { swing } from './folds/swing.ts'
import { tunnel } from './folds/tunnel.ts'
import { twistEasel } from './folds/twist-easel.ts'
import { vFold } from './folds/v-fold.ts'
import { waterfall } from './folds/waterfall.ts'
import { z } from './folds/z.ts'
import type { FoldStyle } from './style.ts'

/** The catalogue: every fold with a name, in the order in which it is shown. `free` is read from the block itself. */
export const foldStyles: ReadonlyMap<string, FoldStyle> = new Map(
  [
    side,
    gate,
    doubleGate,
    z,
    letter,
    accordion,
    joy,
    pocket,
    bridge,
    floatingLayer,
    boxStep,
    vFold,
    sideStep,
    centreStep,
    shutter,
    swing,
    easel,
    twistEasel,
    tunnel,
    shadowBox,
    boxCard,
    waterfall,
    slider,
    endless,
    explodingBox,
    matchBox,
    bellyBand,
  ].map((style) => [style.name, style as unknown as FoldStyle]),
)
