/** A text in which what stands in backticks is set apart. */
export const Rich = ({ text }: { readonly text: string }) => (
  // Parts of one text never change places.
  <>{text.split('`').map((part, i) => (i % 2 === 1 ? <code key={`${i} ${part}`}>{part}</code> : part))}</>
)
