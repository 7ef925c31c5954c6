using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;

namespace StudioKit.Planning.SetUps.WhiteBackground;

/// <summary>What to turn when a white background is not right.</summary>
internal static class WhiteBackgroundAdvice
{
    /// <summary>If this, turn that.</summary>
    public static IReadOnlyList<Remedy> Of(SetUpAtFraming at, SetUpResult result)
    {
        var below = result.Lights.First(light => light.Panel is not null);
        var room = result.HighestMargin is { } highest && result.BrightestMargin is { } brightest ? highest - brightest : default;
        var click = below.Power.Mark.Step.OneClick().CountIn(below.Power.Mark.Step);
        return
        [
            new("Corners do not blink", $"flash below up {click}, to {below.Power.Mark.Brighter}; then again"),
            new("Nothing blinks", "is the flash below on, charged and triggered? Then up 1 stop"),
            new("Subject washed out, dark parts grey", $"flash below down {click}; it has {Room(room)} to spare"),
            new("Subject too dark or too bright", "flash above up or down; the background does not change"),
            .. at.SetUp.LightsOf(LightRole.Above).Any()
                ? Enumerable.Empty<Remedy>()
                : [new Remedy("Only a silhouette", "add a flash above")],
        ];
    }

    private static string Room(Stops room) => room.Value > 0 ? $"{room.Nominal} stop" : "no stop";
}
