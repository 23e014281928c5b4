// SPDX-License-Identifier: Apache-2.0
/** Jobs as text files: read, checked, written. Start with {@link holdfast.job.JobFile}. */
package holdfast.job;
