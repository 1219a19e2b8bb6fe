/** Whether what is typed letter by letter goes on one line, however narrow the page is: more would stick out of it. */
export const isShort = (code: string): boolean => code.length <= 24
