import {
  Color,
  DoubleSide,
  DynamicDrawUsage,
  Float32BufferAttribute,
  InstancedBufferAttribute,
  InstancedBufferGeometry,
  ShaderMaterial,
} from 'three'
import type { Flat } from './told.ts'

/** A line on a sheet: on its face (1) or on its back (-1), at a height over the middle of the sheet. */
export interface PenLine {
  readonly line: readonly [Flat, Flat]
  readonly side: 1 | -1
  readonly height: number
  /** On which side of the line the sheet is, seen on its face: 1 left, -1 right, 0 both. */
  readonly sheet: 1 | 0 | -1
}

/** How a line is drawn: its width in dots of the screen, and 0 drawn through, 1 as a valley, 2 as a mountain. */
export interface Stroke {
  readonly width: number
  readonly dashes: 0 | 1 | 2
}

export const ink = '#1d2a30'

/**
 * Lines as a pen draws them: as wide wherever they are and however the sheet is turned. Each lies in the plane of its
 * sheet, so that what hides the sheet hides the line, and what lies under the sheet does not show through. Where it is
 * wider than the sheet it comes no nearer to the eye: it would show through what the sheet is stuck to.
 */
const vertexShader = `
attribute vec3 from;
attribute vec3 to;
attribute float side;
attribute float sheet;
attribute vec2 stroke;
uniform float pixel;
varying float along;
varying float dashes;
void main() {
  vec4 a = modelViewMatrix * vec4(from, 1.0);
  vec4 b = modelViewMatrix * vec4(to, 1.0);
  vec3 normal = normalMatrix * vec3(0.0, 0.0, side);
  vec2 way = b.xy - a.xy;
  float seen = length(way);
  vec2 ahead = seen > 1e-5 ? way / seen : vec2(1.0, 0.0);
  vec2 aside = vec2(-ahead.y, ahead.x);
  vec2 across = aside * position.y * 0.5 * stroke.x * pixel;
  vec2 beyond = ahead * (position.x * 2.0 - 1.0) * 0.5 * stroke.x * pixel;
  float steep = max(normal.z, 0.2);
  float nearer = -dot(normal.xy, across) / steep;
  bool onSheet = position.y * side * sheet >= 0.0;
  vec4 at = mix(a, b, position.x);
  at.xy += across + beyond;
  at.z += 0.04 + (onSheet ? nearer : min(nearer, 0.0)) - dot(normal.xy, beyond) / steep;
  along = position.x * distance(from, to);
  dashes = stroke.y;
  gl_Position = normal.z < 0.004 || stroke.x <= 0.0 ? vec4(2.0, 2.0, 2.0, 1.0) : projectionMatrix * at;
}
`

/** Dashes of 2.4 mm, or of 4 mm with a dot between them. */
const fragmentShader = `
uniform vec3 colour;
uniform float opacity;
varying float along;
varying float dashes;
void main() {
  float part = mod(along, dashes > 1.5 ? 7.0 : 3.8);
  if (dashes > 1.5 && part > 4.0 && (part < 5.0 || part > 6.0)) discard;
  if (dashes > 0.5 && dashes < 1.5 && part > 2.4) discard;
  gl_FragColor = vec4(colour, opacity);
}
`

/** The pen of a colour. */
export const penOf = (colour: string): ShaderMaterial =>
  new ShaderMaterial({
    vertexShader,
    fragmentShader,
    uniforms: { colour: { value: new Color(colour) }, pixel: { value: 1 }, opacity: { value: 1 } },
    side: DoubleSide,
  })

/** The shape of some lines; how each is drawn is told by `setStroke`. */
export function penShape(lines: readonly PenLine[]): InstancedBufferGeometry {
  const shape = new InstancedBufferGeometry()
  shape.setAttribute(
    'position',
    new Float32BufferAttribute([0, -1, 0, 1, -1, 0, 0, 0, 0, 1, 0, 0, 0, 1, 0, 1, 1, 0], 3),
  )
  shape.setIndex([0, 1, 3, 0, 3, 2, 2, 3, 5, 2, 5, 4])
  const each = (numbers: number[], size: number) =>
    new InstancedBufferAttribute(new Float32Array(numbers), size)
  shape.setAttribute(
    'from',
    each(
      lines.flatMap(({ line: [[x, y]], height }) => [x, y, height]),
      3,
    ),
  )
  shape.setAttribute(
    'to',
    each(
      lines.flatMap(({ line: [, [x, y]], height }) => [x, y, height]),
      3,
    ),
  )
  shape.setAttribute(
    'side',
    each(
      lines.map(({ side }) => side),
      1,
    ),
  )
  shape.setAttribute(
    'sheet',
    each(
      lines.map(({ sheet }) => sheet),
      1,
    ),
  )
  const strokes = each(new Array(lines.length * 2).fill(1), 2)
  strokes.setUsage(DynamicDrawUsage)
  shape.setAttribute('stroke', strokes)
  shape.instanceCount = lines.length
  return shape
}

export function setStroke(shape: InstancedBufferGeometry, line: number, { width, dashes }: Stroke): void {
  const strokes = shape.getAttribute('stroke')
  strokes.setXY(line, width, dashes)
  strokes.needsUpdate = true
}
