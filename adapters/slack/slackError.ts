/** What went wrong at Slack, in one word or sentence. */
import { webApi } from '@slack/bolt';
import { withoutSecrets } from './sdkLog.ts';

/** Slack's own code, such as `channel_not_found`; undefined when it did not answer with one. */
export const codeOf = (fault: unknown): string | undefined =>
  fault instanceof webApi.WebAPIPlatformError ? fault.data.error : undefined;

export function wordOf(fault: unknown): string {
  const code = codeOf(fault);
  if (code !== undefined) return code;
  if (fault instanceof webApi.WebAPIHTTPError) return `HTTP ${fault.statusCode}`;
  if (fault instanceof webApi.WebAPIRateLimitedError) return `rate limited for ${fault.retryAfter} s`;
  if (fault instanceof webApi.WebAPIRequestError) return `no answer (${causeOf(fault.original)})`;
  return fault instanceof Error ? withoutSecrets(fault.message) : 'unknown fault';
}

/** The network's own code, such as ECONNREFUSED, which fetch hides below its error. */
export function causeOf(fault: unknown): string {
  for (let at: unknown = fault; at instanceof Error; at = at.cause) {
    if ('code' in at && typeof at.code === 'string') return at.code;
    if (at.name === 'TimeoutError') return 'timeout';
  }
  return 'connection lost';
}
