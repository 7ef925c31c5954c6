namespace StudioKit.Cli;

/// <summary>What the process says to its caller.</summary>
internal enum ExitCode
{
    /// <summary>Done.</summary>
    Done = 0,

    /// <summary>The input is sound but the plan fails one of its checks, or what is to be printed does not fit on its paper.</summary>
    PlanFails = 1,

    /// <summary>Bad usage or a bad kit.</summary>
    BadInput = 2,

    /// <summary>A file could not be read or written.</summary>
    FileTrouble = 3,

    /// <summary>A fault of StudioKit itself.</summary>
    OwnFault = 70,

    /// <summary>Stopped by the user, as shells count an interrupt.</summary>
    Stopped = 130,
}
