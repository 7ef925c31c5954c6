namespace StudioKit.Physics.Structure.Checks;

/// <summary>What each check takes for given, so that a sheet can say it.</summary>
internal static class AssumedLoads
{
    public static IReadOnlyList<StructuralLoad> Of(StructuralCheckKind kind, StudioCheckCase studio) => kind switch
    {
        StructuralCheckKind.PanelSag or StructuralCheckKind.PanelStress => [Sheet(studio), Subject(studio)],
        StructuralCheckKind.PanelStressUnderElbow => [Sheet(studio), Subject(studio), Elbow(studio)],
        StructuralCheckKind.RailSag => [Sheet(studio), Subject(studio), .. Softening(studio)],
        StructuralCheckKind.RailStress => [Sheet(studio), Subject(studio), Elbow(studio), .. Softening(studio)],
        StructuralCheckKind.SheetGrowth => [Air(studio), SunWarming(studio), new(StructuralLoadKind.Built, studio.Built)],
        StructuralCheckKind.PipeWarmth => [Air(studio), SunWarming(studio)],
        StructuralCheckKind.LegBuckling => [.. Standing(studio), Elbow(studio), .. Guyed(studio) ? [PegHold(studio)] : Array.Empty<StructuralLoad>(), .. Softening(studio)],
        StructuralCheckKind.Sway => [Gust(studio), .. Softening(studio)],
        StructuralCheckKind.Cords => [Gust(studio), PegHold(studio)],
        StructuralCheckKind.Tipping or StructuralCheckKind.Sliding => [Gust(studio), .. Standing(studio), .. studio.Pegs > 0 ? [PegHold(studio)] : Array.Empty<StructuralLoad>()],
        _ => [],
    };

    private static StructuralLoad Sheet(StudioCheckCase studio) => new(StructuralLoadKind.Sheet, UnitsNet.Force.FromNewtons(RailChecks.PanelWeight(studio)));

    private static StructuralLoad Subject(StudioCheckCase studio) => new(StructuralLoadKind.Subject, studio.Subject);

    private static StructuralLoad Elbow(StudioCheckCase studio) => new(StructuralLoadKind.Elbow, studio.Elbow);

    private static StructuralLoad Gust(StudioCheckCase studio) => new(StructuralLoadKind.Gust, studio.Gust);

    private static StructuralLoad PegHold(StudioCheckCase studio) => new(StructuralLoadKind.PegHold, studio.PegHold);

    private static StructuralLoad Air(StudioCheckCase studio) => new(StructuralLoadKind.Air, studio.Air);

    private static StructuralLoad SunWarming(StudioCheckCase studio) => new(StructuralLoadKind.SunWarming, studio.SunWarming);

    private static IReadOnlyList<StructuralLoad> Softening(StudioCheckCase studio) => studio.Pipe.SoftensLikePvc ? [Air(studio), SunWarming(studio)] : [];

    private static IEnumerable<StructuralLoad> Standing(StudioCheckCase studio)
    {
        yield return new StructuralLoad(StructuralLoadKind.Standing, studio.StandingMass + (studio.Sail?.Mass ?? UnitsNet.Mass.Zero));
        if (studio.Ballast > UnitsNet.Mass.Zero)
        {
            yield return new StructuralLoad(StructuralLoadKind.Ballast, studio.Ballast);
        }
    }

    private static bool Guyed(StudioCheckCase studio) => studio is { Guyed: true, Pegs: > 0 };
}
