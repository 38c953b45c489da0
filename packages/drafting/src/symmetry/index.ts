export * from './add-symmetric.ts';
export * from './mirror.ts';
export * from './move-symmetric.ts';
export * from './symmetry.ts';
