/** Cosine and sine of a turn in degrees: whole numbers for quarter turns. */
export function turnOf(degrees: number): readonly [cos: number, sin: number] {
  const quarters = (((degrees / 90) % 4) + 4) % 4
  const whole = (
    [
      [1, 0],
      [0, 1],
      [-1, 0],
      [0, -1],
    ] as const
  )[quarters]
  const angle = (degrees * Math.PI) / 180
  return whole ?? [Math.cos(angle), Math.sin(angle)]
}
