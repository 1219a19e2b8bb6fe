/** The parts of the package that the tests use; it has no types of its own. */
declare module 'fold' {
  // biome-ignore lint/suspicious/noExplicitAny: the package works on whatever JSON it is given
  type Model = any
  export const convert: {
    toJSON(fold: unknown): string
    edges_vertices_to_edges_faces_edges(fold: Model): Model
    flatFoldedGeometry(fold: Model, root?: number): number
  }
  export const filter: { edgesAssigned(fold: Model, letter: string): number[] }
}
