using StudioKit.Physics.Exposure;
using StudioKit.Planning;

namespace StudioKit.Field.Calibration;

/// <summary>What a correction changes on a card: the power of one flash, or the ISO speed, planned without it and with it.</summary>
/// <param name="SetUp">Name of the set-up.</param>
/// <param name="Framing">Name of the framing.</param>
/// <param name="Before">The flash as planned until now.</param>
/// <param name="After">The flash as planned from now on.</param>
/// <param name="IsoBefore">ISO speed until now.</param>
/// <param name="IsoAfter">ISO speed from now on.</param>
public sealed record CardPowerChange(string SetUp, string Framing, LightPlan Before, LightPlan After, IsoSpeed IsoBefore, IsoSpeed IsoAfter)
{
    /// <summary>Whether anything is set otherwise.</summary>
    public bool IsChanged => Before.Power != After.Power || IsoBefore != IsoAfter;

    /// <summary>Every flash of every card that both plans can expose.</summary>
    /// <param name="before">Plan until now.</param>
    /// <param name="after">Plan from now on.</param>
    public static IReadOnlyList<CardPowerChange> Between(Plan before, Plan after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        return
        [
            .. from old in before.Exposures
               from now in after.Exposures
               where old.SetUp == now.SetUp && old.Framing.Name == now.Framing.Name && (old.IsUsable || now.IsUsable)
               from light in old.Lights
               from then in now.Lights
               where then.Place == light.Place
               select new CardPowerChange(old.SetUp, old.Framing.Name, light, then, old.Iso, now.Iso),
        ];
    }
}
