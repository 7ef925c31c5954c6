using StudioKit.Kits.Subjects;

namespace StudioKit.Planning.Session;

/// <summary>A subject in one set-up at one framing.</summary>
/// <param name="Subject">The subject.</param>
/// <param name="Exposure">Set-up and framing.</param>
/// <param name="Held">Whether an animal is held for it.</param>
internal sealed record SessionVisit(SubjectSpec Subject, ExposurePlan Exposure, bool Held)
{
    /// <summary>Whether it is photographed where it sits, with its habitat behind.</summary>
    public bool WhereItSits => Exposure.WhereItSits;

    /// <summary>Whether a polariser must be turned for it.</summary>
    public bool TurnsPolariser => Exposure.TestSteps.Contains(TestStep.TurnPolariser);

    /// <summary>Set-up and framing that the studio stands in.</summary>
    public (string SetUp, string Framing) Place => (Exposure.SetUp, Exposure.Framing.Name);
}
