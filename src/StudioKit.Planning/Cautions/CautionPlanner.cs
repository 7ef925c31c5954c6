using StudioKit.Kits.Studio;
using StudioKit.Kits.Subjects;
using StudioKit.Kits.Uprights;
using StudioKit.Physics;

namespace StudioKit.Planning.Cautions;

/// <summary>What a plan gives cause to warn of, read off the plan.</summary>
internal static class CautionPlanner
{
    private static readonly CautionSheet[] BuildAndSession = [CautionSheet.Build, CautionSheet.Session];
    private static readonly CautionSheet[] SessionAndCards = [CautionSheet.Session, CautionSheet.Handling];

    private static readonly (CautionKind Kind, SubjectGroup[] Groups)[] Dangerous =
    [
        (CautionKind.Stings, [SubjectGroup.FlyingInsects]),
        (CautionKind.Venom, [SubjectGroup.Scorpions, SubjectGroup.CentipedesAndMillipedes, SubjectGroup.Reptiles]),
        (CautionKind.BitesAndDiseases, [SubjectGroup.SmallMammals]),
    ];

    /// <summary>Every caution, in the order of its kind.</summary>
    public static IReadOnlyList<PlanCaution> Of(Plan plan) =>
        [.. Living(plan).Concat(Studio(plan)).Concat(FieldDay.Of(plan)).Concat(Disinfectants(plan)).OrderBy(caution => caution.Kind)];

    private static IEnumerable<PlanCaution> Living(Plan plan)
    {
        if (plan.Handling.Count > 0)
        {
            yield return new PlanCaution
            {
                Kind = CautionKind.ProtectedHere,
                Sheets = [CautionSheet.FieldBook, CautionSheet.Session, CautionSheet.Handling],
                Groups = [.. plan.Handling.Select(card => card.Group)],
            };
        }

        foreach (var (kind, groups) in Dangerous)
        {
            ValueList<SubjectGroup> found = [.. plan.Handling.Select(card => card.Group).Where(groups.Contains)];
            if (found.Count > 0)
            {
                yield return new PlanCaution { Kind = kind, Sheets = SessionAndCards, Groups = found };
            }
        }
    }

    private static IEnumerable<PlanCaution> Studio(Plan plan)
    {
        var below = FlashesUnderSheet.Of(plan);
        if (below.Count > 0)
        {
            yield return new PlanCaution { Kind = CautionKind.EyesOverLowerFlash, Sheets = BuildAndSession, Flashes = below };
        }

        if (WetSheet.Over(plan, below) is { } wet)
        {
            yield return wet;
        }

        if (PlanStages.OnPanel(plan.Kit).Count > 0)
        {
            yield return Cleaning(plan);
        }

        foreach (var sheet in Apart(plan))
        {
            yield return sheet;
        }

        var uprights = plan.Workshop?.Uprights ?? [];
        ValueList<UprightStandPlan> corded = [.. uprights.Where(upright => upright.Cords > 0)];
        if (plan.Frame is { Pegs: > 0 } || corded.Count > 0)
        {
            var pegs = plan.Frame?.Pegs ?? 0;
            yield return new PlanCaution { Kind = CautionKind.TripHazards, Sheets = BuildAndSession, Pegs = pegs, Guys = pegs > 0 && plan.Kit.Frame.Pegs.Guys, Uprights = corded };
        }

        foreach (var (kind, concerned) in new (CautionKind Kind, ValueList<UprightStandPlan> Concerned)[]
        {
            (CautionKind.SheetInWind, uprights),
            (CautionKind.DrivingIntoGround, [.. uprights.Where(upright => upright.Carrier == UprightCarrier.Stakes || upright.Cords > 0)]),
            (CautionKind.SheetEdges, uprights),
        })
        {
            if (concerned.Count > 0)
            {
                yield return new PlanCaution { Kind = kind, Sheets = BuildAndSession, Uprights = concerned };
            }
        }
    }

    // Upright sheets of another material than the panel, or where there is no panel.
    private static IEnumerable<PlanCaution> Apart(Plan plan) => (plan.Workshop?.Uprights ?? [])
        .Select(upright => plan.Kit.Uprights.First(one => one.Name == upright.Name).Sheet)
        .Where(sheet => sheet.HarmedBy.Count > 0 && (PlanStages.OnPanel(plan.Kit).Count == 0 || sheet.Material != plan.Panel.Material))
        .DistinctBy(sheet => sheet.Material)
        .Select(sheet => new PlanCaution
        {
            Kind = CautionKind.SheetCleaning,
            Sheets = BuildAndSession,
            Material = sheet.Material,
            Harms = sheet.HarmedBy,
            Sources = [.. sheet.HarmedBy.Select(Source).Distinct()],
        });

    private static PlanCaution Cleaning(Plan plan) => new()
    {
        Kind = CautionKind.SheetCleaning,
        Sheets = [CautionSheet.Build, CautionSheet.Session, CautionSheet.Handling],
        Groups = [.. plan.Handling.Select(card => card.Group)],
        Material = plan.Panel.Material,
        Harms = plan.Kit.Panel.HarmedBy,
        Bent = plan.Kit.Panel.SweepRadius is not null,
        Sources = [.. plan.Kit.Panel.HarmedBy.Select(Source).Distinct()],
    };

    private static (string Key, string Locator) Source(SheetHarm harm) => harm switch
    {
        SheetHarm.Alkalis => ("PolycarbonateResistance", "not recommended with alkaline solutions and amines"),
        _ => ("Crazing2002", "acrylic and polycarbonate craze under stress in five alcohols, and solvents dissolve them"),
    };

    private static IEnumerable<PlanCaution> Disinfectants(Plan plan)
    {
        foreach (var agents in plan.Handling
            .SelectMany(card => card.Lines.Where(line => line.Disinfectant is not null).Select(line => (card.Group, Kind: Danger(line.Disinfectant!.Agent))))
            .GroupBy(use => use.Kind))
        {
            yield return new PlanCaution { Kind = agents.Key, Sheets = SessionAndCards, Groups = [.. agents.Select(use => use.Group).Distinct()] };
        }
    }

    private static CautionKind Danger(DisinfectantAgent agent) => agent switch
    {
        DisinfectantAgent.Bleach or DisinfectantAgent.Hypochlorite => CautionKind.Bleach,
        DisinfectantAgent.Ethanol => CautionKind.FlammableDisinfectant,
        _ => throw new ArgumentOutOfRangeException(nameof(agent), agent, "A disinfectant whose dangers are not known."),
    };
}
