using UnitsNet;

namespace StudioKit.Planning.Framing;

/// <summary>Smear of one subject in an exposure.</summary>
/// <param name="Subject">Its name.</param>
/// <param name="AtSubject">Smear that takes detail away, as long as it is at the subject.</param>
public sealed record SubjectSmear(string Subject, Length AtSubject);
