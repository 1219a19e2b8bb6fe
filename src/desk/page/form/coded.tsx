/** A text in which backticks set words of the lesson apart. */
export function Coded({ text }: { readonly text: string }) {
  return <>{text.split('`').map((part, i) => (i % 2 === 1 ? <code key={i}>{part}</code> : part))}</>
}
