declare module '*.hbs' {
  const template: TemplateSpecification
  export default template
}
declare module '*?raw' {
  const text: string
  export default text
}
declare module '*?inline' {
  const text: string
  export default text
}
declare module '*?worker&inline' {
  const make: new () => Worker
  export default make
}
declare module '*.css' {}
declare module 'highs-wasm' {
  const packed: string
  export default packed
}
declare module 'highs-as-it-is' {
  const load: (options: object) => Promise<unknown>
  export default load
}

interface ImportMeta {
  glob<T>(
    patterns: string | readonly string[],
    options: { readonly eager: true; readonly import?: string; readonly query?: string },
  ): Record<string, T>
}
