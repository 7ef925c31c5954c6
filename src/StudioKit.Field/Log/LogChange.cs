using StudioKit.Physics;

namespace StudioKit.Field.Log;

/// <summary>One change of a log: all of it was made, or nothing.</summary>
/// <param name="Number">Its number, in order.</param>
/// <param name="At">When it was made.</param>
/// <param name="Action">What was done.</param>
/// <param name="Target">Number of the change that it took back or made again; none for others.</param>
/// <param name="Records">The records concerned.</param>
public sealed record LogChange(long Number, DateTimeOffset At, LogAction Action, long? Target, ValueList<RecordChange> Records);
