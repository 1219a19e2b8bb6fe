/** A length that is written in the words themselves, such as `5 1/2 in`. */
export const plainLength = /[\d½¼¾⅛⅜⅝⅞]\s*(?:in|mm|cm|inch(?:es)?|["″])(?!\p{L})/u
