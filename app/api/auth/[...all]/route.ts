import { answerSignIn } from '@/app/api/auth/answer-sign-in.ts';

/** Signing in and out. See answer-sign-in.ts for the few paths there are. */
export const POST = answerSignIn;
