// Measures how fast documents are checked: `npm run bench`.
process.argv.splice(2, 0, 'bench');
await import('./run.mjs');
