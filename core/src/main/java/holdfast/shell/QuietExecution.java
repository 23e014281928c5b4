// SPDX-License-Identifier: Apache-2.0
package holdfast.shell;

import java.util.Map;
import jdk.jshell.execution.LocalExecutionControl;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;

/** Runs what is typed in this program, as the prompt's own way does, but tells of an exception its message alone. */
public final class QuietExecution implements ExecutionControlProvider {
  /** The name by which the prompt asks for it. */
  static final String NAME = "holdfast";

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public ExecutionControl generate(ExecutionEnv env, Map<String, String> parameters) {
    return new LocalExecutionControl() {
      @Override
      public String invoke(String className, String methodName)
          throws RunException, InternalException, EngineTerminationException {
        try {
          return super.invoke(className, methodName);
        } catch (UserException e) {
          String type = e.causeExceptionClass();
          throw new UserException(e.getMessage(), type.substring(type.lastIndexOf('.') + 1), new StackTraceElement[0]);
        }
      }
    };
  }
}
