// A server of an editor as a process of its own, with its log in a file.
import { spawn } from 'node:child_process';
import { closeSync, openSync, readFileSync } from 'node:fs';
import { createServer } from 'node:net';
import process from 'node:process';
import { setTimeout as pause } from 'node:timers/promises';

/** Starts a program that serves; `stop()` ends it with all that it started. Throws with its log when it does not come up. */
export async function startServing(program, args, { env = process.env, log, url }) {
  const output = openSync(log, 'w');
  // A process group of its own, so that ending it ends the extension hosts too.
  const child = spawn(program, args, { env, detached: true, stdio: ['ignore', output, output] });
  closeSync(output);
  const stop = () => endGroup(child);
  try {
    await answers(url, child, 60_000);
  } catch (error) {
    stop();
    throw new Error(`${error.message}\n${readFileSync(log, 'utf8')}`);
  }
  return stop;
}

function endGroup(child) {
  try {
    process.kill(-child.pid, 'SIGKILL');
  } catch (error) {
    // ESRCH: it has ended by itself.
    if (error.code !== 'ESRCH') throw error;
  }
}

export function freePort() {
  return new Promise((resolve, reject) => {
    const probe = createServer().once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });
}

/** Resolves when the address answers; the pause only spaces the questions, the answer ends the waiting. */
async function answers(url, child, patience) {
  const end = Date.now() + patience;
  while (Date.now() < end) {
    if (child.exitCode !== null) throw new Error(`the editor's server ended with code ${child.exitCode}`);
    const response = await fetch(url).catch(() => undefined);
    if (response?.ok) return;
    await pause(100);
  }
  throw new Error(`the editor's server did not answer within ${patience / 1000} s`);
}
