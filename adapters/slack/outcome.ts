/** What a failed call means for the message it carried: surely not posted, or nobody knows. */
import { webApi } from '@slack/bolt';
import type { SendResult } from '../../src/index.ts';
import { causeOf, codeOf, wordOf } from './slackError.ts';

/** Slack says of these that some of it may have succeeded. */
const UNKNOWN: ReadonlySet<string> = new Set([
  'fatal_error',
  'internal_error',
  'request_timeout',
  'service_unavailable',
  'team_added_to_org',
]);
/** An operator can mend it, and then the message still should go. */
const MENDABLE: ReadonlySet<string> = new Set([
  'invalid_auth', 'not_authed', 'token_revoked', 'token_expired', 'account_inactive', 'missing_scope', 'no_permission',
  'ekm_access_denied', 'access_denied', 'team_access_not_granted',
]); // prettier-ignore
/** Nothing left this machine. */
const NEVER_SENT: ReadonlySet<string> = new Set([
  'ECONNREFUSED', 'ENOTFOUND', 'EAI_AGAIN', 'ENETUNREACH', 'EHOSTUNREACH', 'UND_ERR_CONNECT_TIMEOUT',
  'CERT_HAS_EXPIRED', 'SELF_SIGNED_CERT_IN_CHAIN',
]); // prettier-ignore

/** Surely not sent: the connection itself did not come about. */
export const neverLeft = (fault: unknown): boolean => NEVER_SENT.has(causeOf(fault));

const MEND_AFTER_MS = 60_000;
const BUSY_AFTER_MS = 5_000;
const SERVER_FAULT = 500;

export function outcomeOf(fault: unknown): SendResult {
  const why = wordOf(fault);
  if (fault instanceof webApi.WebAPIRateLimitedError)
    return { outcome: 'later', why, afterMs: fault.retryAfter * 1000 };
  if (fault instanceof webApi.WebAPIHTTPError)
    return fault.statusCode >= SERVER_FAULT
      ? { outcome: 'unknown', why }
      : { outcome: 'later', why, afterMs: MEND_AFTER_MS };
  if (fault instanceof webApi.WebAPIRequestError)
    return neverLeft(fault.original)
      ? { outcome: 'later', why, afterMs: BUSY_AFTER_MS }
      : { outcome: 'unknown', why };
  const code = codeOf(fault);
  return code === undefined ? { outcome: 'unknown', why } : refusal(code, why);
}

function refusal(code: string, why: string): SendResult {
  if (UNKNOWN.has(code)) return { outcome: 'unknown', why };
  if (code === 'ratelimited' || code === 'rate_limited')
    return { outcome: 'later', why, afterMs: BUSY_AFTER_MS };
  if (MENDABLE.has(code)) return { outcome: 'later', why, afterMs: MEND_AFTER_MS };
  return { outcome: 'refused', why };
}
