using StudioKit.Cli.Usage;
using StudioKit.Field;
using StudioKit.Kits;

namespace StudioKit.Cli.Tests;

/// <summary>On a terminal a fault names the command that helps; what the fault itself says holds anywhere.</summary>
public sealed class CommandHintsTests
{
    [Fact]
    public void An_empty_kit_is_told_the_command_that_writes_one() =>
        CommandHints.On(Only("")).Format().Should().EndWith("hint: 'studiokit new' writes a commented file to start from.");

    [Fact]
    public void Light_in_words_is_told_the_command_that_has_the_table()
    {
        var fault = Only("kit: Bog\ncamera: {name: body, sensor: 36 mm x 24 mm}\nlenses: [{name: reed, focal-length: 50 mm}]\nsite: {ambient: gloomy}\n");

        CommandHints.On(fault).Hint.Should().StartWith(fault.Hint).And.EndWith("'studiokit words light' has a table.");
    }

    [Fact]
    public void Frames_without_powers_are_told_the_option() =>
        CommandHints.On(new FieldDiagnostic("FLD107", "panel.jpg", "No power.") { Help = FieldHelp.Powers }).Hint.Should().Contain("--ladder 1/32");

    private static Diagnostic Only(string text) => KitReader.Parse(text, "kit.yaml", PartsLibrary.Embedded).Diagnostics.Should().ContainSingle().Subject;
}
