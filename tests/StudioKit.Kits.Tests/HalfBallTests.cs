namespace StudioKit.Kits.Tests;

/// <summary>Domes that are half balls.</summary>
public sealed class HalfBallTests
{
    [Fact]
    public void A_dome_may_be_a_half_ball() => Read("kind: dome, half-ball: yes").Kit!.Modifiers[0].HalfBall.Should().BeTrue();

    [Theory]
    [InlineData("kind: softbox, half-ball: yes", "kind: dome")]
    [InlineData("kind: dome, half-ball: yes, lobe-exponent: 2", "lobe-exponent")]
    public void What_is_no_half_ball_is_refused(string keys, string hint)
    {
        var fault = Read(keys).Diagnostics.Should().ContainSingle().Which;

        fault.Code.Should().Be(DiagnosticCodes.Contradiction);
        fault.Hint.Should().Contain(hint);
    }

    [Fact]
    public void Only_of_domes_is_it_told_that_none_is_a_half_ball()
    {
        Read("kind: softbox").Defaults.Should().NotContain(used => used.Path.EndsWith("half-ball", StringComparison.Ordinal));
        Read("kind: dome").Defaults.Should().Contain(used => used.Path.EndsWith("half-ball", StringComparison.Ordinal));
        Read("kind: dome, half-ball: yes").Defaults.Should().NotContain(used => used.Path.EndsWith("lobe-exponent", StringComparison.Ordinal));
    }

    private static KitReadResult Read(string keys) => KitReader.Parse(
        $"kit: Any\ncamera: {{name: body, sensor: 36 mm x 24 mm}}\nlenses: [{{name: reed, focal-length: 55 mm}}]\nmodifiers: [{{name: one, {keys}}}]\n", "kit.yaml", PartsLibrary.Embedded);
}
