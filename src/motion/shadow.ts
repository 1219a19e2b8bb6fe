import {
  AddEquation,
  type BufferGeometry,
  Color,
  CustomBlending,
  DoubleSide,
  Matrix4,
  Mesh,
  MeshBasicMaterial,
  NotEqualStencilFunc,
  OneFactor,
  OneMinusSrcAlphaFactor,
  ReplaceStencilOp,
  SrcAlphaFactor,
} from 'three'
import type { Vector } from './rigid.ts'

/** Where shadows fall from: the side that the light comes from, and steeper, so that they stay near. */
const sun: Vector = [0.28, 0.86, 0.42]

/** The shadows of plates on the table. */
export interface Shadows {
  readonly meshes: readonly Mesh[]
  /** Lays the shadow of a plate that is at `place` on a table at this height. */
  readonly cast: (plate: number, isThere: boolean, place: Matrix4, table: number) => void
}

/** Flat shadows, one tone where several fall on each other. */
export function shadowsOf(shapes: readonly (BufferGeometry | undefined)[]): Shadows {
  const tone = new MeshBasicMaterial({
    color: new Color('#43381f'),
    opacity: 0.1,
    // Laid on before all else, where three would draw what lets light through after it.
    blending: CustomBlending,
    blendEquation: AddEquation,
    blendSrc: SrcAlphaFactor,
    blendDst: OneMinusSrcAlphaFactor,
    blendSrcAlpha: OneFactor,
    blendDstAlpha: OneMinusSrcAlphaFactor,
    side: DoubleSide,
    depthTest: false,
    depthWrite: false,
    stencilWrite: true,
    stencilRef: 1,
    stencilFunc: NotEqualStencilFunc,
    stencilZPass: ReplaceStencilOp,
  })
  const meshes = shapes.map((shape) => {
    const mesh = new Mesh(shape, tone)
    mesh.matrixAutoUpdate = false
    mesh.renderOrder = -1
    mesh.frustumCulled = false
    return mesh
  })
  return {
    meshes,
    cast(plate, isThere, place, table) {
      const mesh = meshes[plate]
      if (!mesh) return
      mesh.visible = isThere
      mesh.matrix.multiplyMatrices(castOn(table), place)
    },
  }
}

/** Where points fall on the table. */
function castOn(table: number): Matrix4 {
  const [x, z] = [sun[0] / sun[1], sun[2] / sun[1]]
  return new Matrix4().set(1, -x, 0, x * table, 0, 0, 0, table, 0, -z, 1, z * table, 0, 0, 0, 1)
}
