// SPDX-License-Identifier: Apache-2.0
/**
 * The whole job: a roller, the machine member that takes its stud, the nut, and the duty, joined into a plan and the
 * installation sheet.
 */
package holdfast.installation;
