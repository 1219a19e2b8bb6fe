/** What a language calls tools: by their English names, words with commas between, in the singular. */
export type ToolWords = Readonly<Record<string, string>>
