import process from 'node:process';
import * as vscode from 'vscode';
import { type CheckTaskDefinition, checkArguments, TASK_TYPE } from './checkArguments';

/** Offers `witnessmark check` as a task. A task runs a program, so there is none until the folder is trusted. */
export function registerCheckTask(context: vscode.ExtensionContext): void {
  const register = () =>
    context.subscriptions.push(vscode.tasks.registerTaskProvider(TASK_TYPE, new CheckTasks(context)));
  if (vscode.workspace.isTrusted) register();
  else context.subscriptions.push(vscode.workspace.onDidGrantWorkspaceTrust(register));
}

class CheckTasks implements vscode.TaskProvider {
  readonly #cli: string;

  constructor(context: vscode.ExtensionContext) {
    this.#cli = context.asAbsolutePath('server/dist/cli.js');
  }

  provideTasks(): vscode.Task[] {
    const onDisk = (vscode.workspace.workspaceFolders ?? []).filter(({ uri }) => uri.scheme === 'file');
    return onDisk.map((folder) => this.#task({ type: TASK_TYPE }, folder));
  }

  resolveTask({ definition, scope }: vscode.Task): vscode.Task | undefined {
    const folder = typeof scope === 'object' ? scope : vscode.workspace.workspaceFolders?.[0];
    return folder === undefined ? undefined : this.#task(definition as CheckTaskDefinition, folder);
  }

  #task(definition: CheckTaskDefinition, folder: vscode.WorkspaceFolder): vscode.Task {
    const args = checkArguments(definition);
    const name = definition.path ?? vscode.l10n.t('check all documents');
    const task = new vscode.Task(
      definition,
      folder,
      name,
      'witnessmark',
      definition.program === 'workspace' ? inWorkspace(args, folder) : this.#packaged(args, folder),
      // The findings of the whole folder are problems already while it is open; with a matcher each would stand there twice.
      [],
    );
    task.detail = `witnessmark ${args.join(' ')}`;
    task.group = vscode.TaskGroup.Build;
    return task;
  }

  /** The command line that came with the extension, run by the editor's own Node. No shell reads the paths. */
  #packaged(args: readonly string[], { uri }: vscode.WorkspaceFolder): vscode.ProcessExecution {
    // Without colours the report is plain text, which the problem matcher reads on every terminal.
    const env = { ELECTRON_RUN_AS_NODE: '1', NO_COLOR: '1' };
    return new vscode.ProcessExecution(process.execPath, [this.#cli, ...args], { cwd: uri.fsPath, env });
  }
}

/** The version that the folder itself has installed, so that editor and CI run the same. */
function inWorkspace(args: readonly string[], { uri }: vscode.WorkspaceFolder): vscode.ShellExecution {
  const quoted = args.map((value) => ({ value, quoting: vscode.ShellQuoting.Strong }));
  return new vscode.ShellExecution('npx', ['--no-install', 'witnessmark', ...quoted], {
    cwd: uri.fsPath,
    env: { NO_COLOR: '1' },
  });
}
