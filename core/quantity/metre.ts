/** Millimetres in a metre: focal lengths are counted in millimetres, powers in dioptres, which are one over metres. */
export const metre = 1000;
