// The colours that the editor gives a page in each of its four kinds of theme, from memory of its default themes.
const fonts = '--vscode-font-family: sans-serif; --vscode-font-size: 13px;';

export const themes = {
  light: {
    body: 'vscode-light',
    scheme: 'light',
    contrast: 'no-preference',
    variables: `--vscode-foreground: #3b3b3b; --vscode-editor-foreground: #3b3b3b; --vscode-editor-background: #ffffff;
      --vscode-panel-border: #e5e5e5; --vscode-focusBorder: #005fb8; --vscode-textLink-foreground: #005fb8;
      --vscode-button-foreground: #ffffff; --vscode-button-background: #005fb8; --vscode-button-hoverBackground: #0258a8;
      --vscode-button-secondaryForeground: #3b3b3b; --vscode-button-secondaryBackground: #e5e5e5;
      --vscode-dropdown-foreground: #3b3b3b; --vscode-dropdown-background: #ffffff; --vscode-dropdown-border: #cecece; ${fonts}`,
  },
  dark: {
    body: 'vscode-dark',
    scheme: 'dark',
    contrast: 'no-preference',
    variables: `--vscode-foreground: #cccccc; --vscode-editor-foreground: #cccccc; --vscode-editor-background: #1f1f1f;
      --vscode-panel-border: #2b2b2b; --vscode-focusBorder: #0078d4; --vscode-textLink-foreground: #4daafc;
      --vscode-button-foreground: #ffffff; --vscode-button-background: #0078d4; --vscode-button-hoverBackground: #026ec1;
      --vscode-button-secondaryForeground: #cccccc; --vscode-button-secondaryBackground: #313131;
      --vscode-dropdown-foreground: #cccccc; --vscode-dropdown-background: #313131; --vscode-dropdown-border: #3c3c3c; ${fonts}`,
  },
  'high contrast': {
    body: 'vscode-high-contrast',
    scheme: 'dark',
    contrast: 'more',
    variables: `--vscode-foreground: #ffffff; --vscode-editor-foreground: #ffffff; --vscode-editor-background: #000000;
      --vscode-contrastBorder: #6fc3df; --vscode-panel-border: #6fc3df; --vscode-focusBorder: #f38518;
      --vscode-textLink-foreground: #21a6ff; --vscode-button-foreground: #ffffff; --vscode-button-background: #000000;
      --vscode-dropdown-foreground: #ffffff; --vscode-dropdown-background: #000000; --vscode-dropdown-border: #6fc3df; ${fonts}`,
  },
  'light high contrast': {
    body: 'vscode-high-contrast vscode-high-contrast-light',
    scheme: 'light',
    contrast: 'more',
    variables: `--vscode-foreground: #292929; --vscode-editor-foreground: #292929; --vscode-editor-background: #ffffff;
      --vscode-contrastBorder: #0f4a85; --vscode-panel-border: #0f4a85; --vscode-focusBorder: #006bbd;
      --vscode-textLink-foreground: #0f4a85; --vscode-button-foreground: #ffffff; --vscode-button-background: #0f4a85;
      --vscode-dropdown-foreground: #292929; --vscode-dropdown-background: #ffffff; --vscode-dropdown-border: #0f4a85; ${fonts}`,
  },
};
