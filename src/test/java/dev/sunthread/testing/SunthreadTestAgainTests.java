package dev.sunthread.testing;

class SunthreadTestAgainTests extends SunthreadTestContract {}
