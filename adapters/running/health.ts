/** /healthz for whoever watches the process: on this machine only, no texts, no secrets. */
import { createServer, type Server } from 'node:http';
import { PlatformFault, type ServiceState } from '../../src/index.ts';

export const isWell = ({ platforms }: ServiceState): boolean => platforms.every(({ connected }) => connected);

const stamp = (at: number | undefined): string | null =>
  at === undefined ? null : new Date(at).toISOString();

export const healthOf = (state: ServiceState): Record<string, unknown> => ({
  ok: isWell(state),
  platforms: state.platforms.map(({ name, connected, since, lastEventAt, note }) => ({
    name, connected, since: stamp(since), lastEventAt: stamp(lastEventAt), ...(note === undefined ? {} : { note }),
  })),
  waiting: state.waiting,
  unsent: state.unsent,
  nextDigest: stamp(state.nextDigest),
}); // prettier-ignore

export interface Health {
  port: number;
  close(): Promise<void>;
}

/** `port` 0 takes any that is free. Rejects with a PlatformFault when the port cannot be had. */
export async function serveHealth(port: number, state: () => Promise<ServiceState>): Promise<Health> {
  const server = createServer((request, response) => {
    if (request.method !== 'GET' || request.url !== '/healthz') {
      response.writeHead(404).end();
      return;
    }
    state().then(
      (now) =>
        response
          .writeHead(isWell(now) ? 200 : 503, { 'content-type': 'application/json' })
          .end(JSON.stringify(healthOf(now))),
      () => response.writeHead(500).end(),
    );
  });
  await new Promise<void>((resolve, reject) => {
    server.once('error', (fault: NodeJS.ErrnoException) =>
      reject(
        new PlatformFault(
          'serve',
          `The health page cannot be shown on 127.0.0.1:${port} (${fault.code ?? fault.name}): set FETTLE_HEALTH_PORT to another port, or to 0 for none.`,
          fault,
        ),
      ),
    );
    server.listen(port, '127.0.0.1', resolve);
  });
  return { port: portOf(server), close: () => new Promise((resolve) => server.close(() => resolve())) };
}

function portOf(server: Server): number {
  const address = server.address();
  return typeof address === 'object' && address ? address.port : 0;
}
