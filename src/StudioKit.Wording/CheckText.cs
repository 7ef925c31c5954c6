using StudioKit.Physics;
using StudioKit.Planning;
using StudioKit.Planning.Checks;

namespace StudioKit.Wording;

/// <summary>A check of a plan in words, the same on every sheet and screen.</summary>
public static class CheckText
{
    /// <summary>What was checked, e.g. "Panel size".</summary>
    public static string Name(PlanCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return CheckNames.Of(check);
    }

    /// <summary>What is checked by a check of a kind, e.g. "Panel size".</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="parts">What it is about.</param>
    public static string Name(PlanCheckKind kind, ValueList<string> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        return CheckNames.Of(kind, parts);
    }

    /// <summary>What is asked, with its unit.</summary>
    public static string Demand(PlanCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return CheckDemands.Of(check);
    }

    /// <summary>What there is of it, with its unit.</summary>
    public static string Capacity(PlanCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return CheckCapacities.Of(check);
    }

    /// <summary>What would make it pass; empty where it passes.</summary>
    public static string Remedy(PlanCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return CheckRemedies.Of(check);
    }

    /// <summary>Keys of the kit that would mend it, with what stands under each now; empty where it passes.</summary>
    /// <param name="check">The check.</param>
    /// <param name="plan">The plan that it belongs to.</param>
    public static string Keys(PlanCheck check, Plan plan)
    {
        var keys = CheckKeys.Of(check, plan);
        return keys.Count == 0 ? "" : $"In the kit: {string.Join("; ", keys.Select(Key))}.";
    }

    /// <summary>Where in its source the rule stands.</summary>
    public static string Locator(PlanCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return check.Demand is CheckAmount.BagFill fill ? $"things of odd sizes fill {MeasureFormat.Percent(fill.PackingFactor)} of a bag" : check.SourceLocator;
    }

    /// <summary>What is asked and what is given, as a clause.</summary>
    public static string Shortfall(PlanCheck check) => CheckCapacities.IsClause(check)
        ? $"{Demand(check)} asked; {Capacity(check).TrimEnd('.')}"
        : $"{Demand(check)} asked, {Capacity(check)} given";

    private static string Key(KitKey key) => (key.Value, key.Standing) switch
    {
        ({ } value, _) => $"{key.Path} (now {value})",
        (_, { } standing) => $"{key.Path} (left out, taken as {standing})",
        _ => key.Path,
    };

    /// <summary>The caveats behind the name of what was checked, as one line; empty where there are none.</summary>
    public static string Note(PlanCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        return check.Caveats.Count == 0 ? "" : $"{Name(check)}: {string.Join(' ', check.Caveats.Select(CaveatText.Of))}";
    }
}
