namespace StudioKit.Kits.Subjects;

/// <summary>What gear is disinfected with, where its dangers to people and gear are known.</summary>
public enum DisinfectantAgent
{
    /// <summary>Household bleach, a solution of sodium hypochlorite.</summary>
    Bleach,

    /// <summary>Sodium hypochlorite itself, the active part of household bleach.</summary>
    Hypochlorite,

    /// <summary>Ethanol in water.</summary>
    Ethanol,
}
