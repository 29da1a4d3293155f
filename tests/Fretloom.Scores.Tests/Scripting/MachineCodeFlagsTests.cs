using Fretloom.Scores.Scripting;

namespace Fretloom.Scores.Tests.Scripting;

public sealed class MachineCodeFlagsTests
{
    // Not an error where it fails, but everything that is engraved or set then takes several times as long.
    [Fact]
    public void V8_can_be_told_to_make_machine_code_quickly() => Assert.True(ScriptRuntime.IsQuick);
}
