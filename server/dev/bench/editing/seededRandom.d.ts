/** Numbers from 0 up to 1 that are the same for the same seed (a linear congruential generator; figures from memory). */
export declare function seededRandom(seed: number): () => number;
