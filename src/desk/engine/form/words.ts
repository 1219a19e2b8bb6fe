/** What the fields of a part are called. */
const labels: Readonly<Record<string, string>> = {
  fold: 'Fold',
  closed: 'Size when it is shut',
  on: 'On',
  side: 'Which side',
  border: 'Border',
  raise: 'Raised by',
  stock: 'Paper',
  weight: 'Weight',
  bulk: 'Bulk of the paper',
  caliper: 'Thickness of one sheet',
  direction: 'The pattern has a top',
  from: 'From',
  to: 'To',
  at: 'Where',
  letters: 'Letters',
  widths: 'Width of the letters',
  margin: 'Free at both ends',
  count: 'How many',
  rim: 'Least rim',
  make: 'Made as',
  clearance: 'Room round the card',
  seam: 'Seam',
  flap: 'Glue flap',
}

/** A key of the block as the name of its field: `slot height` is `Slot height`. */
export const labelOf = (key: string): string => labels[key] ?? `${key[0]?.toUpperCase() ?? ''}${key.slice(1)}`

/** The edges of a border, and what stands for several of them. */
export const edgeLabels: Readonly<Record<string, string>> = {
  left: 'Left',
  right: 'Right',
  top: 'Top',
  bottom: 'Bottom',
  sides: 'Left and right',
  ends: 'Top and bottom',
  spine: 'Beside the spine',
  opening: 'Where it opens',
}
