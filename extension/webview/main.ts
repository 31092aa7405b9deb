/** The preview's page: shows finished pictures and reports where they were touched. It computes nothing about circuits. */
import { connectHost } from './host.ts';
import { createPage } from './page.ts';

const host = connectHost();
host.onMessage(createPage(host));
host.post({ type: 'ready' });
