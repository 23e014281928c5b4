// SPDX-License-Identifier: Apache-2.0
package holdfast.fits;

import java.io.InvalidObjectException;
import java.io.ObjectStreamException;
import java.io.Serializable;
import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;

/** Candidates of a selection in order, an unmodifiable list that prints one candidate a line. */
public final class FitCandidates extends AbstractList<FitCandidate> implements RandomAccess, Serializable {
  private static final long serialVersionUID = 1L;
  private static final int PRINTED = 10;

  /** Copied, so that it is serializable. */
  @SuppressWarnings("serial")
  private final List<FitCandidate> candidates;

  FitCandidates(List<FitCandidate> candidates) {
    this.candidates = List.copyOf(candidates);
  }

  /** A stream may hold a list that changes, or none. */
  private Object readResolve() throws ObjectStreamException {
    if (candidates == null || candidates.stream().anyMatch(candidate -> !(((Object) candidate) instanceof FitCandidate))) {
      throw new InvalidObjectException("candidates: a list of candidates is wanted");
    }
    return new FitCandidates(candidates);
  }

  @Override
  public FitCandidate get(int index) {
    return candidates.get(index);
  }

  @Override
  public int size() {
    return candidates.size();
  }

  /** The first ten, one a line, for example {@code "25 H7/r6: … interference; commonly used, hole basis"}. */
  @Override
  public String toString() {
    if (isEmpty()) {
      return "no fit of ISO 286 satisfies the request";
    }
    StringBuilder text = new StringBuilder();
    for (FitCandidate candidate : candidates.subList(0, Math.min(PRINTED, size()))) {
      text.append(candidate.fit()).append("; ").append(candidate.standing()).append(", ").append(candidate.basis()).append('\n');
    }
    if (size() > PRINTED) {
      text.append("… and ").append(size() - PRINTED).append(" more");
    }
    return text.toString().stripTrailing();
  }
}
