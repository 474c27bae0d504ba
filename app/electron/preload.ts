import { contextBridge, ipcRenderer } from 'electron';
import { type Bridge, CALL_CHANNEL } from '../../shared/contract/call.ts';

/** All the page gets of the world outside: one typed call, and which shell it is in. */
const bridge: Bridge = { shell: 'electron', call: (request) => ipcRenderer.invoke(CALL_CHANNEL, request) };

contextBridge.exposeInMainWorld('ripecell', bridge);
