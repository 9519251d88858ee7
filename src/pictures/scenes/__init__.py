"""What stands before the camera, by phase. Each function lays one scene and returns its View."""
