declare module 'dxf' {
  export class Helper {
    constructor(text: string)
    readonly denormalised: Record<string, unknown>[]
  }
}
