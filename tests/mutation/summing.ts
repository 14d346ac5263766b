/**
 * Topics that sum over thousands of points. Every branch of the code under mutation is counted at each pass, which makes their tests many
 * times slower: there one file is under mutation at a time, and only the topic's own tests and those from outside are asked.
 */
export const summing: readonly string[] = ['wave', 'fourier', 'picture'];
