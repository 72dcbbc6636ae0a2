// Nothing but the place where the precompiled header of the rooms of the window is made.
