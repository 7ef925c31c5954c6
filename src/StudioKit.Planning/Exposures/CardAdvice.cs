using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Physics.Exposure.SetUps;

namespace StudioKit.Planning.Exposures;

/// <summary>What to try on the test object, and what to turn when the frame is not right.</summary>
internal static class CardAdvice
{
    /// <summary>How to see that a set-up works, before the animal comes out of its box.</summary>
    public static string Check(SetUpKind kind) => kind switch
    {
        SetUpKind.WhiteBackground => "Test object on the panel, flash above off, fire: the whole background must blink as overexposed.",
        SetUpKind.DaylightFill => "Flash off, fire: the habitat must be right and the subject a little dark. Flash on: no shadow of its own.",
        SetUpKind.LowLightFill => "Flash off, fire: the scene must be as bright as it should look. Flash on: the subject lifts, the scene stays.",
        _ => "Flash off, fire: the frame must be black. Key alone, then rim alone, then both.",
    };

    /// <summary>If this, turn that.</summary>
    public static IReadOnlyList<Remedy> Remedies(SetUpAtFraming at, SetUpResult result) => at.SetUp.Kind switch
    {
        SetUpKind.WhiteBackground => WhiteBackground(at, result),
        SetUpKind.DaylightFill =>
        [
            new("Habitat too bright", "smaller aperture or lower ISO"),
            new("Flash shows, hard shadows", "fill down 1/3 to 2/3"),
            new("Subject dark against the sky", "fill up 1/3 to 2/3"),
        ],
        SetUpKind.LowLightFill =>
        [
            new("Smeared", "wait for the lull, or one stop shorter and ISO up one stop"),
            new("Looks flash-lit", "fill down 1/3 to 2/3"),
            new("Wet skin glares", "turn the polariser; it costs 1 to 2 stops"),
        ],
        _ =>
        [
            new("Background shows with flash off", "lower ISO or smaller aperture, flashes up as much"),
            new("Background shows with flash on", "move it farther off, or the key closer and down"),
            new("Outline lost", "rim up 1/3 to 2/3, or farther round behind"),
        ],
    };

    private static IReadOnlyList<Remedy> WhiteBackground(SetUpAtFraming at, SetUpResult result)
    {
        var below = result.Lights.First(light => light.Panel is not null);
        var room = result.HighestMargin is { } highest && result.BrightestMargin is { } brightest ? highest - brightest : default;
        return
        [
            new("Corners do not blink", $"flash below up 1/3, to {ThirdStopSeries.Brighter(below.Power.Power).Nominal}; then again"),
            new("Nothing blinks", "is the flash below on, charged and triggered? Then up 1 stop"),
            new("Subject washed out, dark parts grey", $"flash below down 1/3; it has {Room(room)} to spare"),
            new("Subject too dark or too bright", "flash above up or down; the background does not change"),
            .. at.SetUp.Lights.Any(light => light.Role == LightRole.Above)
                ? Enumerable.Empty<Remedy>()
                : [new Remedy("Only a silhouette", "add a flash above")],
        ];
    }

    private static string Room(Stops room) => room.Value > 0 ? $"{room.Nominal} stop" : "no stop";
}
