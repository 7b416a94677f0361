// What speaks the protocol, bundled by itself: the entry and what is loaded behind it have to share one copy, for it
// asks of an answer whether it is one of its own errors.
export * from 'vscode-languageserver/node';
