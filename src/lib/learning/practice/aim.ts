/**
 * Share of jobs a person should get right in practice: mostly right, with something left to learn. A teaching number;
 * what is written on it lies between 0.75 and 0.85 (from memory).
 */
export const AIM = 0.8;
