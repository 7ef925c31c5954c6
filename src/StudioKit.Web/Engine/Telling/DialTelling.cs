using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Planning.Previewing;
using StudioKit.Planning.Studio.Lights;
using StudioKit.Web.Results;
using StudioKit.Wording;

namespace StudioKit.Web.Engine.Telling;

/// <summary>The dial of the flash below, and what a power comes to.</summary>
internal static class DialTelling
{
    private const double Same = 1e-6;

    /// <summary>The dial, set to a framing's power; none where there is no flash below.</summary>
    public static PowerDial? Of(KitSpec kit, FramingLightPlan framing, PanelLightPlan light)
    {
        var marks = Marks(kit, light);
        return marks.Count == 0 ? null : new PowerDial(light.Flashes[0].Flash, [.. marks.Select(mark => mark.Nominal)], Nearest(marks, framing.Power));
    }

    /// <summary>Power of a mark; none where no mark is named, or the dial has no such mark.</summary>
    public static FlashPower? Power(KitSpec kit, PanelLightPlan light, int? mark) => mark is { } place && Marks(kit, light) is var marks && place >= 0 && place < marks.Count ? marks[place].Power : null;

    /// <summary>What a framing's margins come to.</summary>
    public static string Comes(FramingLightPlan framing, Stops target)
    {
        var (darkest, brightest) = (framing.Darkest.Margin, framing.Brightest.Margin);
        var white = darkest.Value < -Same ? "not white everywhere"
            : darkest.Value < target.Value - Same ? $"white all over, but under the {AdviceText.Amount(target)} asked for"
            : "white all over";
        var veil = framing.HighestMargin is { } highest && brightest.Value > highest.Value + Same ? "; so bright that it washes out the subject" : "";
        return $"{framing.Mark.Nominal}: {StopText.Of(darkest, brightest)}, {white}{veil}";
    }

    // All flashes below are set alike, so the first one's dial stands for all.
    private static IReadOnlyList<DialMark> Marks(KitSpec kit, PanelLightPlan light) =>
        light.Flashes.Count > 0 && kit.Flashes.FirstOrDefault(flash => flash.Name == light.Flashes[0].Flash) is { } flash ? PowerDialMarks.Of(flash.LowestPower, flash.PowerStep) : [];

    private static int Nearest(IReadOnlyList<DialMark> marks, FlashPower power) =>
        Enumerable.Range(0, marks.Count).MinBy(place => Math.Abs(marks[place].Power.StopsBelowFull - power.StopsBelowFull));
}
