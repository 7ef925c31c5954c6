namespace StudioKit.Kits.Tests;

/// <summary>When a set-up is photographed: in which light, at which hours.</summary>
public sealed class SetUpWindowTests
{
    private const string Text = """
        kit: Moths
        camera: {name: body, sensor: 36 mm x 24 mm}
        lenses: [{name: reed, focal-length: 55 mm}]
        flashes: [{name: sedge, guide-number: 30 m}]
        set-ups:
          - name: night
            kind: low-light-fill
            lights: [{flash: sedge, role: fill, distance: 50 cm}]
            ambient: EV 2

        """;

    // 2.5 lx is EV 0 (ISO 2720, C = 250); each stop doubles it: 20 lx are EV 3.
    [Theory]
    [InlineData("EV 0 to EV 3", 0, 3)]
    [InlineData("EV 2 to EV 2", 2, 2)]
    [InlineData("EV 0 to 20 lx", 0, 3)]
    public void A_window_of_light_is_read_with_both_ends(string window, double darkest, double brightest)
    {
        var light = Read($"    light-window: {window}\n").Kit!.SetUps[0].LightWindow!;

        light.Darkest.AtIso100.Should().BeApproximately(darkest, 1e-9);
        light.Brightest.AtIso100.Should().BeApproximately(brightest, 1e-9);
    }

    [Theory]
    [InlineData("09:00 to 17:30", 540, 1050, 510)]
    [InlineData("9:05 to 9:06", 545, 546, 1)]
    [InlineData("22:00 to 01:00", 1320, 60, 180)]
    public void Hours_are_read_to_the_minute_and_past_midnight(string hours, int from, int to, double minutes)
    {
        var clock = Read($"    clock: {hours}\n").Kit!.SetUps[0].Clock!;

        (clock.From, clock.To).Should().Be((from, to));
        clock.Length.Minutes.Should().BeApproximately(minutes, 1e-9);
    }

    [Theory]
    [InlineData("light-window: EV 2", DiagnosticCodes.UnreadableValue)]
    [InlineData("light-window: EV 3 to EV 1", DiagnosticCodes.UnreadableValue)]
    [InlineData("light-window: 1 to 3", DiagnosticCodes.UnreadableValue)]
    [InlineData("light-window: EV 1 to EV 19", DiagnosticCodes.OutOfRange)]
    [InlineData("light-window: EV 3 to EV 4", DiagnosticCodes.Contradiction)]
    [InlineData("clock: 09:00", DiagnosticCodes.UnreadableValue)]
    [InlineData("clock: 09:00 to 09:00", DiagnosticCodes.UnreadableValue)]
    [InlineData("clock: 09:00 to 24:00", DiagnosticCodes.UnreadableValue)]
    [InlineData("clock: 09:60 to 12:00", DiagnosticCodes.UnreadableValue)]
    [InlineData("clock: -1:00 to 12:00", DiagnosticCodes.UnreadableValue)]
    [InlineData("clock: 9 to 17", DiagnosticCodes.UnreadableValue)]
    public void What_is_no_window_is_refused(string line, string code) =>
        Read($"    {line}\n").Diagnostics.Should().ContainSingle().Which.Code.Should().Be(code);

    private static KitReadResult Read(string line) => KitReader.Parse(Text + line, "kit.yaml", PartsLibrary.Embedded);
}
