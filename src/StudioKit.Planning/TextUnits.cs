namespace StudioKit.Planning;

/// <summary>Units in which a plan is told.</summary>
public enum TextUnits
{
    /// <summary>Metric, save what the kit gives in inches: that is said as the kit has it, its metric size behind it.</summary>
    Metric,

    /// <summary>Inches, feet, pounds and ounces; millimetres stay where the trade has no others, as for focal lengths.</summary>
    Inches,

    /// <summary>Metric, with inches or pounds behind it.</summary>
    Both,
}
