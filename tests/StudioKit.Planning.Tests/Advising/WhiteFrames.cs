using StudioKit.Kits;
using StudioKit.Kits.Lighting;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Changes;
using UnitsNet;

namespace StudioKit.Planning.Tests.Advising;

/// <summary>Kits with a white background, and what their test frames really show: whole plans of kits whose flash gives what it really gives.</summary>
internal static class WhiteFrames
{
    /// <summary>Whether a flash is to spare, how near the flash below stands, and how strict the veil limit is.</summary>
    public static Gen<(bool WithSpare, double Millimetres, double Veil)> AnyPanel { get; } = Gen.Select(Gen.Bool, Gen.Double[120, 450], Gen.Double[0.25, 0.8]);

    // A flash close under the sheet lights it unevenly, so that a strict veil limit leaves little room between grey corners and a washed-out subject.
    public static KitSpec OnWhite(KitSpec kit, (bool WithSpare, double Millimetres, double Veil) panel) => kit with
    {
        Flashes = panel.WithSpare ? [.. kit.Flashes, kit.Flashes[0] with { Name = "three" }] : kit.Flashes,
        Modifiers = [new ModifierSpec { Name = "dome", Kind = ModifierKind.Dome }],
        SetUps =
        [
            .. kit.SetUps.Select(setUp => setUp with
            {
                Kind = SetUpKind.WhiteBackground,
                VeilLimit = new Stops(panel.Veil),
                Lights = [new LightSpec { Flash = "one", Role = setUp.Upright is null ? LightRole.Below : LightRole.Behind, Distance = Length.FromMillimeters(panel.Millimetres) }, new LightSpec { Flash = "two", Role = LightRole.Above, Distance = Length.FromMillimeters(400) }],
            }),
        ],
    };

    // What was set against what is planned: power and speed count once, the f-number twice.
    public static Stops MarginAt(ExposurePlan planned, FlashPower power, IsoSpeed iso, FNumber aperture)
    {
        var below = planned.Lights.First(light => light.Role.IsBackground());
        return new Stops(planned.WhiteMargin!.Value.Value + below.Power.StopsBelowFull - power.StopsBelowFull
            + Math.Log2(iso.Value / planned.Iso.Value) - (2 * Math.Log2(aperture.Value / planned.Aperture.Value)));
    }

    public static ExposurePlan? Planned(KitReadResult read, IEnumerable<KitChange> changes, ExposurePlan exposure) =>
        KitPlanner.Plan(read with { Kit = changes.Aggregate(read.Kit!, (kit, change) => change.Apply(kit)) })
            .Exposures.SingleOrDefault(then => then.SetUp == exposure.SetUp && then.Framing.Name == exposure.Framing.Name);
}
